/** A headless browser: the one packed with the development dependencies, or else one that this machine has. */
import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { chromium } from 'playwright-core';

const FLAGS = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync', '--font-render-hinting=none'];

/** Set for a while, then put back. */
async function withEnv<T>(values: Readonly<Record<string, string>>, body: () => Promise<T>): Promise<T> {
  const before = Object.keys(values).map((name) => [name, process.env[name]] as const);
  Object.assign(process.env, values);
  try {
    return await body();
  } finally {
    for (const [name, value] of before) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
}

/** Unpacks browser, libraries and fonts once a machine: aside first, then a rename, since test files run at the same time. */
async function unpacked(): Promise<string> {
  const home = join(tmpdir(), 'medlar-chromium-147.0.0');
  if (existsSync(home)) return home;
  const aside = mkdtempSync(`${home}-`);
  // The package unpacks into TMPDIR, and brings its libraries along only where it believes to be on a bare server.
  await withEnv({ TMPDIR: aside, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs22.x', LD_LIBRARY_PATH: '', FONTCONFIG_PATH: aside }, async () => {
    const { default: packed } = await import('@sparticuz/chromium');
    await packed.executablePath();
  });
  mkdirSync(join(aside, 'cache'));
  writeFileSync(join(aside, 'fonts.conf'), `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${home}/fonts</dir><cachedir>${home}/cache</cachedir></fontconfig>`);
  try {
    renameSync(aside, home);
  } catch (e) {
    rmSync(aside, { recursive: true, force: true });
    if (!existsSync(home)) throw e;
  }
  return home;
}

/** Its own fonts alone, so that lines break alike everywhere. */
async function launchPacked(): Promise<Browser> {
  if (process.platform !== 'linux' || process.arch !== 'x64') throw new Error(`the packed browser is not for ${process.platform} ${process.arch}`);
  const home = await unpacked();
  const libraries = [join(home, 'al2023/lib'), process.env['LD_LIBRARY_PATH']].filter(Boolean).join(':');
  return await chromium.launch({ executablePath: join(home, 'chromium'), args: FLAGS, env: { ...process.env, LD_LIBRARY_PATH: libraries, FONTCONFIG_PATH: home, FONTCONFIG_FILE: join(home, 'fonts.conf') } });
}

function installed(): string[] {
  const windows = [process.env['PROGRAMFILES'], process.env['PROGRAMFILES(X86)'], process.env['LOCALAPPDATA']].filter((p) => p !== undefined);
  return [
    process.env['CHROME_PATH'] ?? '',
    '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome', '/usr/bin/google-chrome-stable', '/snap/bin/chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome', '/Applications/Chromium.app/Contents/MacOS/Chromium',
    ...windows.map((p) => join(p, 'Google/Chrome/Application/chrome.exe')),
  ].filter((path) => path !== '' && existsSync(path));
}

/** A browser, or why there is none. Where CHROME_PATH is set, that one. */
export async function openBrowser(): Promise<Browser | string> {
  const why: string[] = [];
  const launches = installed().map((executablePath) => () => chromium.launch({ executablePath, args: FLAGS }));
  for (const launch of process.env['CHROME_PATH'] ? launches : [launchPacked, ...launches]) {
    try {
      return await launch();
    } catch (e) {
      why.push(e instanceof Error ? e.message.split('\n').slice(0, 4).join(' ') : String(e));
    }
  }
  return `no browser starts here: ${why.join('; ') || 'CHROME_PATH names no file'}`;
}
