import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { precompiled } from '../templates/precompile.mjs';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  define: { MEDLAR_VERSION: JSON.stringify('0.0.0-test') },
  plugins: [{
    name: 'templates',
    enforce: 'pre',
    load(id: string) { return id.endsWith('.hbs') ? precompiled(id) : null; },
  }],
  test: { setupFiles: ['tests/properties.ts'], include: ['tests/**/*.test.ts'], testTimeout: 60_000, hookTimeout: 60_000, pool: 'forks', reporters: ['default', ['json', { outputFile: 'node_modules/.vitest/results.json' }]] },
});
