/** One of several, chosen with arrows and Enter; drawn on stderr like every question. */
import { isCancel, select } from '@clack/prompts';

/** Resolves to the place of the choice; rejects when they leave. Enter alone takes the last, as it does where letters are typed. */
export async function chooseByArrows(question: string, choices: readonly string[]): Promise<number> {
  const chosen = await select({ message: question, options: choices.map((label, value) => ({ label, value })), initialValue: choices.length - 1, output: process.stderr, withGuide: false, showInstructions: false });
  if (isCancel(chosen)) throw new Error('the terminal was closed');
  return chosen;
}
