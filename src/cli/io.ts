/** The outside world of a command, so that it can be run in a test as in a terminal. */
import type { Day } from '../units/date.ts';

export type Io = {
  readonly cwd: string;
  readonly today: Day;
  /** Results. */
  readonly out: (text: string) => void;
  /** All else. */
  readonly err: (text: string) => void;
  /** Shows a file in the program that this machine shows such files in; false where none is known. Absent where nobody looks. */
  readonly open?: (path: string) => Promise<boolean>;
  readonly stdin: () => Promise<string>;
  /** The same as it came in, for a report that may be in another encoding; absent where only text comes. */
  readonly bytes?: () => Promise<Uint8Array>;
  /** The same as it comes in, piece by piece, for what must not be held whole; and a wait until what was said is taken. */
  readonly chunks?: () => AsyncIterable<Uint8Array>;
  readonly rested?: () => Promise<void>;
  /** Asks the person at the terminal; absent where none sits there. Rejects when they leave. */
  readonly ask?: (question: string) => Promise<string>;
  /** The same for one of several, by its place; absent where it is asked for by letter. */
  readonly choose?: (question: string, choices: readonly string[]) => Promise<number>;
  /** Whether lines that were pasted together still wait to be asked for. */
  readonly waiting?: () => boolean;
};

/** Options every command takes. */
export type Common = { readonly json?: true; readonly folder?: string; readonly today?: string };

export const EXIT = { fine: 0, fault: 1, usage: 2, mistakes: 3, impossible: 4, file: 5, answer: 6 } as const;

/** Nothing that a file holds may drive the terminal, nor turn the lines after it about (marks of direction). */
export const tame = (text: string): string => text.replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, '');
