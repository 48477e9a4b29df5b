import { questionProblems, setProblems } from './item-rules.ts';
import { prepareQuestion, type Answers, type Question } from './prepare-questions.ts';
import { readQuestionFile } from './question-file.ts';

/**
 * A lesson's questions, read, computed and checked against the rules of item writing.
 *
 * @param lesson its folder, for the message
 * @param data the content of its questions file
 * @param answers its functions
 * @param objectives ids of its objectives
 * @throws Error listing everything that is wrong with the file
 */
export function lessonQuestions(
  lesson: string,
  data: unknown,
  answers: Answers,
  objectives: readonly string[],
): readonly Question[] {
  const { questions, problems } = readQuestionFile(data);
  if (questions === undefined) throw listed(lesson, problems);
  const written = questions.flatMap((question) => questionProblems(question, objectives));
  if (written.length > 0) throw listed(lesson, written);
  const prepared = questions.map((question) => prepareQuestion(question, answers));
  const together = setProblems(prepared);
  if (together.length > 0) throw listed(lesson, together);
  return prepared;
}

function listed(lesson: string, problems: readonly string[]): Error {
  return new Error(`lessons/${lesson}/questions.yaml\n${problems.map((p) => `  ${p}`).join('\n')}`);
}
