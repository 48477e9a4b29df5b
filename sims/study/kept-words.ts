import type { StoredState } from '../shared/stored-state.ts';

/** What a device keeps of a visitor's study, in a sentence. */
export function keptWords({ lessons }: StoredState): string {
  const all = Object.values(lessons);
  const predictions = all.reduce((sum, lesson) => sum + Object.keys(lesson.predictions).length, 0);
  const answers = all.reduce((sum, lesson) => sum + Object.keys(lesson.answers).length, 0);
  if (predictions + answers === 0) return 'This device keeps no predictions and no answers.';
  return `This device keeps ${counted(predictions, 'prediction')} and ${counted(answers, 'answer')}.`;
}

function counted(count: number, word: string): string {
  return `${count === 0 ? 'no' : count} ${word}${count === 1 ? '' : 's'}`;
}
