/** Shows a file in the program that the machine has for it. */
import { spawn } from 'node:child_process';

/** By platform: the program that opens a file, and what stands before the file. */
const OPENERS: Readonly<Partial<Record<NodeJS.Platform, readonly [program: string, ...before: string[]]>>> = { darwin: ['open'], win32: ['rundll32.exe', 'url.dll,FileProtocolHandler'] };

/** An opener that fails says so at once. */
const WAIT_MS = 500;

/** False where no program starts, or it finds nothing to show the file with. It goes on when we end. */
export function openFile(path: string): Promise<boolean> {
  const [program, ...before] = OPENERS[process.platform] ?? ['xdg-open'];
  return new Promise((resolve) => {
    const child = spawn(program, [...before, path], { detached: true, stdio: 'ignore' });
    const timer = setTimeout(() => {
      child.unref();
      resolve(true);
    }, WAIT_MS);
    const end = (opened: boolean): void => {
      clearTimeout(timer);
      resolve(opened);
    };
    child.once('error', () => end(false)).once('exit', (code) => end(code === 0));
  });
}
