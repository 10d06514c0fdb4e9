/** What the compiler cannot see: promises left hanging, values of no type, unlike things compared. */
import tseslint from 'typescript-eslint';

const node = Object.fromEntries(['console', 'performance', 'process', 'Buffer', 'URL', 'setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'document', 'window'].map((name) => [name, 'readonly']));

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', '**/*.d.ts', '**/*.d.mts'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: ['src/**/*.ts', 'tests/**/*.ts'],
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      'eqeqeq': ['error', 'always', { null: 'ignore' }],
      '@typescript-eslint/consistent-type-imports': ['error', { disallowTypeAnnotations: false }],
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true }],
      '@typescript-eslint/no-unnecessary-boolean-literal-compare': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/use-unknown-in-catch-callback-variable': 'error',
    },
  },
  {
    // A command's answer differs in shape by command, so tests read it untyped.
    files: ['tests/**/*.ts'],
    rules: Object.fromEntries(
      ['no-explicit-any', 'no-unsafe-argument', 'no-unsafe-assignment', 'no-unsafe-call', 'no-unsafe-member-access', 'no-unsafe-return']
        .map((name) => [`@typescript-eslint/${name}`, 'off']),
    ),
  },
  {
    // Small build files in plain JavaScript: no types to check by.
    files: ['**/*.mjs', '**/*.js', '**/*.cjs'],
    extends: [tseslint.configs.base],
    languageOptions: { globals: node },
    rules: { 'eqeqeq': 'error', 'no-undef': 'error', 'no-unused-vars': 'error', 'no-const-assign': 'error', 'no-unreachable': 'error', 'prefer-const': 'error' },
  },
);
