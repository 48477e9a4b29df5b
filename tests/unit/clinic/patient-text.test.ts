import { expect, test } from 'vitest';
import { patientBlocks } from '../../../site/clinic/patient-text.ts';

test('paragraphs, list items and the words for pictures are read, in order', () => {
  const html = `<main data-patient><h2>Title</h2><p>One  <b>ball</b>.</p>
    <ul><li>Two.</li><li><p>Three.</p></li></ul>
    <div role="img" aria-label="Four."><svg><title>no</title><text>no</text></svg></div>
    <a href="#">Next</a><button>Push</button></main>`;
  expect(patientBlocks(html)).toEqual(['One ball.', 'Two.', 'Three.', 'Four.']);
});

test('what is not for the patient, and what is set aside, is not read', () => {
  const html = `<p>Staff.</p><div data-patient><p>Patient.</p><div data-uncounted><p>No.</p></div></div>`;
  expect(patientBlocks(html)).toEqual(['Patient.']);
});

test('a mark inside a marked part does not count it twice', () => {
  expect(patientBlocks('<div data-patient><div data-patient><p>Once.</p></div></div>')).toEqual([
    'Once.',
  ]);
});
