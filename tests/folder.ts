/** A grower's folder for one test. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** A folder with these files; `act` may shape it further, and its answer is given back. It is removed in the end. */
export async function withFolder<T>(files: Readonly<Record<string, string | Buffer>>, act: (folder: string) => T | Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'medlar-'));
  try {
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), text);
    }
    return await act(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
