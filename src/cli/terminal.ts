/** The door: terminal, clock and exit code. */
import { say } from '../words/words.ts';
import { EXIT } from './io.ts';
import { run } from './main.ts';

const now = new Date();
const pad = (n: number): string => String(n).padStart(2, '0');

process.stdout.on('error', (e: NodeJS.ErrnoException) => {
  // A reader that closes early (head, less) is no fault.
  process.exit(e.code === 'EPIPE' ? EXIT.fine : EXIT.file);
});

async function bytes(): Promise<Buffer> {
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}

const chunks = (): AsyncIterable<Uint8Array> => process.stdin as AsyncIterable<Buffer>;
const rested = async (): Promise<void> => { if (process.stdout.writableNeedDrain) await new Promise<void>((go) => { process.stdout.once('drain', go); }); };

const stdin = async (): Promise<string> => (await bytes()).toString('utf8');

/** Questions on stderr, a line back for each; lines pasted together wait their turn. Rejects on ctrl-C and ctrl-D. */
let reader: { ask: (question: string) => Promise<string>; waiting: () => boolean; close: () => void } | null = null;
async function ask(question: string): Promise<string> {
  reader ??= (await import('./ask.ts')).openReader();
  return reader.ask(question);
}

/** Arrows need the keys for themselves. */
async function choose(question: string, choices: readonly string[]): Promise<number> {
  reader?.close();
  reader = null;
  return (await import('./prompts.ts')).chooseByArrows(question, choices);
}
const open = async (path: string): Promise<boolean> => (await import('./open.ts')).openFile(path);

/** A terminal that says no width, or a narrow one, gets letters to type. */
const arrows = process.env.TERM !== 'dumb' && process.stderr.isTTY && process.stderr.columns >= 40;
const waiting = (): boolean => reader?.waiting() === true;

process.exitCode = await run(process.argv.slice(2), {
  cwd: process.cwd(), today: `${now.getFullYear()}-${pad(now.getMonth() + 1)}-${pad(now.getDate())}`,
  out: (text) => process.stdout.write(text), err: (text) => process.stderr.write(text), stdin, bytes, chunks, rested, open,
  ...(process.stdin.isTTY && process.stdout.isTTY ? { ask, waiting, ...(arrows ? { choose } : {}) } : {}),
}).catch((e: unknown) => {
  process.stderr.write(`${say('en-US', 'notice', 'fault', { why: e instanceof Error ? e.message : String(e) })}\n`);
  return EXIT.fault;
}).finally(() => reader?.close());
