/**
 * Loads the room before any test. A command loads its files when it is asked for, and what a file does as it loads
 * (its lists, its patterns) would else count as reached by that one test alone, and seem to outlive every other.
 */
import { readdirSync } from 'node:fs';
import { folderOf } from './rooms.mjs';

const folder = folderOf(process.env.MEDLAR_ROOM ?? 'soil');
for (const file of readdirSync(folder)) if (/(?<!\.d)\.ts$/.test(file)) await import(/* @vite-ignore */ `../../${folder}/${file}`);
