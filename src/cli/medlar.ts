#!/usr/bin/env node
/** The entry: asks Node to keep what it compiles (from 22.8 on), before anything else is loaded. */
import module from 'node:module';

(module as unknown as { enableCompileCache?: () => void }).enableCompileCache?.();
await import('./terminal.ts');
