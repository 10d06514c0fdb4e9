import type { Words } from './en-US.ts'; import { enUS } from './en-US.ts'; export const es: Words = enUS;
