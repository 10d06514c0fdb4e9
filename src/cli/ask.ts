/** Asks at the terminal. */
import { createInterface } from 'node:readline/promises';

export function openReader(): { ask: (question: string) => Promise<string>; waiting: () => boolean; close: () => void } {
  const reader = createInterface({ input: process.stdin, output: process.stderr });
  const lines = reader[Symbol.asyncIterator]();
  let waiting = 0;
  reader.on('line', () => { waiting++; });
  return {
    ask: async (question) => {
      reader.setPrompt(question);
      reader.prompt();
      const next = await lines.next();
      if (next.done) throw new Error('the terminal was closed');
      waiting--;
      return next.value;
    },
    waiting: () => waiting > 0,
    close: () => { reader.close(); },
  };
}
