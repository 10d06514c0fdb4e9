/** The outside world of a command, so that it can be run in a test as in a terminal. */
import type { Day } from '../units/date.ts';

export type Io = {
  readonly cwd: string;
  readonly today: Day;
  /** Results. */
  readonly out: (text: string) => void;
  /** All else. */
  readonly err: (text: string) => void;
  readonly stdin: () => Promise<string>;
  /** Asks the person at the terminal; absent where none sits there. Rejects when they leave. */
  readonly ask?: (question: string) => Promise<string>;
};

/** Options every command takes. */
export type Common = { readonly json?: true; readonly folder?: string; readonly today?: string };

export const EXIT = { fine: 0, fault: 1, usage: 2, mistakes: 3, impossible: 4, file: 5, answer: 6 } as const;

/** Nothing that a file holds may drive the terminal. */
export const tame = (text: string): string => text.replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/g, '');
