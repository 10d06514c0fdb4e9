/** Asks at the terminal. */
import { createInterface } from 'node:readline/promises';

export function openReader(): { ask: (question: string) => Promise<string>; close: () => void } {
  const reader = createInterface({ input: process.stdin, output: process.stderr });
  const lines = reader[Symbol.asyncIterator]();
  return {
    ask: async (question) => {
      reader.setPrompt(question);
      reader.prompt();
      const next = await lines.next();
      if (next.done) throw new Error('the terminal was closed');
      return next.value;
    },
    close: () => { reader.close(); },
  };
}
