/** The page's policy forbids made-up code. zod must know before the first schema is built, so this is imported first. */
import { config } from 'zod/mini';

export const { jitless } = config({ jitless: true });
