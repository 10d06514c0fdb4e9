/** Ctrl-C while files are written: they are finished first, so that none is left half-written, no lock and no temporary file. */
const CODES = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 } as const;
let waits = false;

/** From the first writing on a run ends between two steps and no longer within one; its exit code says by which signal. */
export function finishFirst(): void {
  if (waits) return;
  waits = true;
  for (const [signal, code] of Object.entries(CODES)) process.on(signal, () => process.exit(code));
}
