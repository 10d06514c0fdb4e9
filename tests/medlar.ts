/** Runs a command as a terminal would, in a fresh folder, and gives back what it said. */
import { run } from '../src/cli/main.ts';
import { MARKS } from '../src/reason/figure.ts';
import { sourceOf } from '../src/tables/sources.ts';
import { keysOf } from '../src/words/words.ts';
import { withFolder } from './folder.ts';

export type FigureJson = { value: number; unit: string; of: string; step: string; text: string; from: string[]; cite: { source: string; at: string; mark: string } };
export type Answer = {
  medlar: string; schema: number; command: string; ok: boolean;
  // The result's shape differs by command; tests look at the part they check.
  result: any;
  questions: { code: string; text: string; about: string; choices: string[]; changes: string }[];
  notices: { code: string; severity: string; text: string; file?: string; line?: number; column?: number }[];
  figures: Record<string, FigureJson>;
};
export type Run = { code: number; stdout: string; stderr: string; json: Answer };

const JUDGEMENTS = keysOf('judgement');

/** Of every answer, whatever a test asks of it: each figure has its unit and substance and names its step, a publication that is held, a place in it and how far to trust it, a judgement of our own its reason; each notice and question is said. */
function allNamed({ figures, notices, questions }: Answer): void {
  for (const [id, { unit, of, step, text, cite }] of Object.entries(figures)) {
    if (unit === '' || of === '' || step === '' || text === '') throw new Error(`${id} has no unit or no reason: ${unit} of ${of}, ${step}, ${text}`);
    if (!sourceOf(cite.source) || cite.at === '' || !(MARKS as readonly string[]).includes(cite.mark)) throw new Error(`${id} (${step}) names no place: ${JSON.stringify(cite)}`);
    if (cite.source === 'medlar' && !JUDGEMENTS.includes(cite.at)) throw new Error(`${id} (${step}) is a judgement without its reason: ${cite.at}`);
  }
  for (const { code, text } of [...notices, ...questions]) if (code === '' || text === '') throw new Error(`nothing is said: ${code}, ${text}`);
}

/** `files` are written into a new folder, which is the working folder; `look` may read what the command left there. `answers` sit at a terminal; after the last of them it closes. */
export async function medlar(argv: readonly string[], files: Readonly<Record<string, string | Buffer>> = {}, stdin: string | Buffer = '', look?: (folder: string) => void, answers?: readonly string[]): Promise<Run> {
  return withFolder(files, async (folder) => {
    let stdout = '';
    let stderr = '';
    const said = [...(answers ?? [])];
    const ask = (question: string): Promise<string> => {
      stderr += question;
      return said.length > 0 ? Promise.resolve(said.shift()!) : Promise.reject(new Error('closed'));
    };
    const code = await run(argv, { cwd: folder, today: '2026-03-14', out: (t) => { stdout += t; }, err: (t) => { stderr += t; }, stdin: () => Promise.resolve(String(stdin)), bytes: () => Promise.resolve(Buffer.from(stdin as string)), ...(answers ? { ask } : {}) });
    look?.(folder);
    const json = (argv.includes('--json') && stdout ? JSON.parse(stdout) : null) as Answer;
    if (json) allNamed(json);
    return { code, stdout, stderr, json };
  });
}
