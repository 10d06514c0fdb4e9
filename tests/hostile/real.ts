/** Medlar as it is installed: a process of its own, in a real folder, on a machine that a test may bend. `npm run build` comes first. */
import { spawn, spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const MEDLAR = fileURLToPath(new URL('../../dist/medlar.js', import.meta.url));
export type Ran = { readonly code: number | null; readonly signal: string | null; readonly stdout: string; readonly stderr: string };

/** Ends after half a minute: what waits for ever is a failure with no exit code. */
export function real(folder: string, argv: readonly string[], env: Readonly<Record<string, string>> = {}): Ran {
  const { status, signal, stdout, stderr } = spawnSync(process.execPath, [MEDLAR, ...argv], { cwd: folder, env: { ...process.env, ...env }, encoding: 'utf8', input: '', timeout: 30_000, killSignal: 'SIGKILL' });
  return { code: status, signal, stdout, stderr };
}

/** Stopped by a signal some milliseconds after its start, as ctrl-C does. */
export function stopped(folder: string, argv: readonly string[], after: number): Promise<Ran> {
  return new Promise((go) => {
    const child = spawn(process.execPath, [MEDLAR, ...argv], { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] });
    let [stdout, stderr] = ['', ''];
    child.stdout.on('data', (c: Buffer) => { stdout += c.toString(); });
    child.stderr.on('data', (c: Buffer) => { stderr += c.toString(); });
    const timer = setTimeout(() => child.kill('SIGINT'), after);
    child.on('close', (code, signal) => {
      clearTimeout(timer);
      go({ code, signal, stdout, stderr });
    });
  });
}
