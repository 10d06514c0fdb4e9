// Writing: a template that is wrong, a sheet that was edited, a place that cannot be written. Codes: design.md 6.
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { GOOD, held, inFolder, leftovers, REPORT } from './hold.ts';

const files = { 'orchard.yaml': GOOD, 'soil/2025.txt': REPORT };

describe('a template of one\'s own', () => {
  test.each([
    ['a misspelt field', 'Hello\n{{orchrd}}\n', 'template-path', 'orchrd', 'orchard', 2],
    ['a loop over a misspelt field', '{{#each dyas}}{{title}}{{/each}}', 'template-path', 'dyas', 'days', 1],
    ['a field misspelt inside a loop', '{{#each days}}\n{{#each rows}}{{nmae}}{{/each}}{{/each}}', 'template-path', 'nmae', 'name', 2],
    ['a condition on a misspelt field', '{{#if larg}}x{{/if}}', 'template-path', 'larg', 'large', 1],
    ['a misspelt field after else', '{{#if large}}x{{else}}{{feding}}{{/if}}', 'template-path', 'feding', 'feeding', 1],
    ['a field one level too far up', '{{#each days}}{{../title}}{{/each}}', 'template-path', 'title', '', 1],
    ['lookup', '{{lookup this "constructor"}}', 'template-helper', 'lookup', '', 1],
    ['a partial', '{{> other}}', 'template-helper', '', '', 1],
    ['log', '{{log "x"}}', 'template-helper', 'log', '', 1],
    ['a block of another name', '{{#unknown days}}x{{/unknown}}', 'template-helper', 'unknown', '', 1],
    ['a decorator', '{{* foo}}', 'template-helper', '', '', 1],
    ['an inline partial', '{{#*inline "a"}}x{{/inline}}', 'template-helper', '', '', 1],
    ['a helper inside a condition', '{{#if (lookup this "x")}}x{{/if}}', 'template-helper', '', '', 1],
    ['the prototype', '{{constructor}}', 'template-path', 'constructor', '', 1],
    ['the prototype of a list', '{{days.constructor}}', 'template-path', 'constructor', '', 1],
    ['__proto__', '{{__proto__}}', 'template-path', '__proto__', '', 1],
    ['a word that is no heading', '{{words.trea}}', 'template-path', 'trea', '', 1],
    ['an unclosed block', '{{#if large}}x', 'template-broken', '', '', 0],
  ] as const)('%s: exit 3, told, nothing written', async (_, template, code, named, guess, line) => {
    await inFolder({ ...files, 'templates/sheet.html.hbs': template }, async (folder, medlar) => {
      const said = await medlar('sheet');
      held(said);
      expect(said.code).toBe(3);
      expect(said.stderr).toContain('templates/sheet.html.hbs');
      if (named) expect(said.stderr).toContain(named);
      if (guess) expect(said.stderr).toContain(`"${guess}"`);
      const { json, code: exit } = await medlar('sheet', '--json');
      expect(exit).toBe(3);
      const found = json.notices.find((n) => n.code === code);
      expect(found, json.notices.map((n) => n.code).join()).toBeDefined();
      if (line) expect(found).toMatchObject({ file: 'templates/sheet.html.hbs', line });
      expect(existsSync(join(folder, 'sheet.html'))).toBe(false);
      expect(leftovers(folder)).toEqual([]);
    });
  });

  test('a good one is used, and its text is escaped', async () => {
    const yaml = GOOD.replace('Test Bank', '"<b>Bank"');
    await inFolder({ ...files, 'orchard.yaml': yaml, 'templates/sheet.html.hbs': 'MINE {{orchard}} {{#each days}}{{#each rows}}{{name}} {{#each doses}}{{amount}}{{/each}} {{../../orchard}}{{/each}}{{@index}}{{/each}} {{words.tick}}' }, async (folder, medlar) => {
      expect((await medlar('sheet')).code).toBe(0);
      const html = readFileSync(join(folder, 'sheet.html'), 'utf8');
      expect(html).toMatch(/^MINE &lt;B&gt;BANK GATE APPLE \d/);
      expect(html).not.toMatch(/<b>/i);
    });
  });

  test('it does not touch the text form', async () => {
    await inFolder({ ...files, 'templates/sheet.html.hbs': '{{orchrd}}' }, async (folder, medlar) => {
      expect((await medlar('sheet', '--as', 'text')).code).toBe(0);
      expect(existsSync(join(folder, 'sheet.txt'))).toBe(true);
    });
  });

  test('{{this}} in a loop over plain texts works as written', async () => {
    await inFolder({ ...files, 'templates/sheet.html.hbs': '{{#each use}}[{{this}}]{{/each}}' }, async (folder, medlar) => {
      expect((await medlar('sheet')).code).toBe(0);
      expect(readFileSync(join(folder, 'sheet.html'), 'utf8')).toMatch(/^\[Sulphate of ammonia/);
    });
  });
});

describe.each([['html', 'sheet.html'], ['text', 'sheet.txt']])('a sheet that stands there already, %s', (form, name) => {
  const make = ['sheet', '--as', form];
  test('unedited, it is remade', async () => {
    await inFolder(files, async (folder, medlar) => {
      expect((await medlar(...make)).code).toBe(0);
      const first = readFileSync(join(folder, name), 'utf8');
      expect((await medlar(...make)).code).toBe(0);
      // The same folder on the same day gives the same sheet, byte for byte.
      expect(readFileSync(join(folder, name), 'utf8')).toBe(first);
      writeFileSync(join(folder, 'orchard.yaml'), GOOD.replace('12 ft', '14 ft'));
      expect((await medlar(...make)).code).toBe(0);
      expect(readFileSync(join(folder, name), 'utf8')).not.toBe(first);
      expect(leftovers(folder)).toEqual([]);
    });
  });

  test.each([
    ['a word changed', (t: string) => t.replace('Gate', 'Kate').replace('GATE', 'KATE')],
    ['a note put below the end', (t: string) => `${t}my note\n`],
    ['its mark lost', (t: string) => t.replace(/(?:<!-- medlar .*|# medlar .*)\n?$/, '')],
    ['another file of that name', () => 'My own sheet\n'],
    ['an empty file of that name', () => ''],
  ])('%s: left alone, exit 5, until --force', async (_, edit) => {
    await inFolder(files, async (folder, medlar) => {
      expect((await medlar(...make)).code).toBe(0);
      const mine = edit(readFileSync(join(folder, name), 'utf8'));
      writeFileSync(join(folder, name), mine);
      const said = await medlar(...make);
      held(said);
      expect(said.code).toBe(5);
      expect(said.stderr).toContain(name);
      expect(said.stderr).toContain('--force');
      expect((await medlar(...make, '--json')).json).toMatchObject({ ok: false, result: null });
      expect(readFileSync(join(folder, name), 'utf8')).toBe(mine);
      expect((await medlar(...make, '--force')).code).toBe(0);
      expect(readFileSync(join(folder, name), 'utf8')).not.toBe(mine);
      expect(leftovers(folder)).toEqual([]);
    });
  });

  test('a folder of that name: exit 5, nothing half written', async () => {
    await inFolder(files, async (folder, medlar) => {
      mkdirSync(join(folder, name));
      for (const argv of [make, [...make, '--force']]) {
        const said = await medlar(...argv);
        held(said);
        expect(said.code).toBe(5);
        expect(said.stderr).toContain(name);
      }
      expect(readdirSync(join(folder, name))).toEqual([]);
      expect(leftovers(folder)).toEqual([]);
    });
  });
});

test('a sheet for one tree of an unkind name stays inside the folder', async () => {
  for (const tree of ['../../up', '..', '/etc/x', 'a/b', '###', '木']) {
    const yaml = GOOD.replace('  Gate apple:', `  "${tree}":`);
    await inFolder({ ...files, 'orchard.yaml': yaml }, async (folder, medlar) => {
      const { json, code } = await medlar('sheet', tree, '--json');
      expect(code, tree).toBe(0);
      const [file] = json.result.files as string[];
      expect(file).toMatch(/^sheet-[^/\\]+\.html$/);
      expect(readdirSync(folder)).toContain(file);
      expect(readdirSync(folder).sort()).toEqual(['orchard.yaml', file, 'soil'].sort());
    });
  }
});

test('two trees whose names make the same file name do not share a sheet unseen', async () => {
  const yaml = GOOD.replace('trees:', 'trees:\n  Gate-Apple: pear, planted 2015, 18 ft across, shoots 6 in 2025, bank');
  await inFolder({ ...files, 'orchard.yaml': yaml }, async (_, medlar) => {
    const one = await medlar('sheet', 'Gate-Apple', '--json');
    const two = await medlar('sheet', 'Gate apple', '--json');
    expect([one.code, two.code]).toEqual([0, 0]);
    expect(one.json.result.files).not.toEqual(two.json.result.files);
  });
});
