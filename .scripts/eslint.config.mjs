// What the compiler cannot see. Layout is Prettier's, layers are dependency-cruiser's.
import regexp from 'eslint-plugin-regexp'
import tseslint from 'typescript-eslint'

const noClock = 'A layer below the adapters has no clock: take the day from Site or from an argument.'

/** Of Node, and of the pages that some scripts look into. */
const globals =
  'AbortSignal Buffer DOMParser TextDecoder URL clearInterval clearTimeout console document fetch getComputedStyle location performance process setInterval setTimeout structuredClone window'

export default tseslint.config(
  {
    files: ['.scripts/**/*.mjs', '.*.mjs'],
    languageOptions: { globals: Object.fromEntries(globals.split(' ').map((name) => [name, 'readonly'])) },
    rules: { 'no-undef': 'error' },
  },
  { ignores: ['**/*.generated.*', 'dist/**', 'node_modules/**', '.output/**'] },
  {
    files: ['client/src/**/*.ts', 'server/src/**/*.ts', 'test/**/*.ts'],
    extends: [tseslint.configs.base],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname + '/..' } },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'no-eval': 'error',
      'no-new-func': 'error',
      'no-self-compare': 'error',
      'no-var': 'error',
      'prefer-const': 'error',
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': ['error', { ignoreVoid: false }],
      '@typescript-eslint/no-misused-promises': 'error',
      '@typescript-eslint/no-unnecessary-type-assertion': 'error',
      '@typescript-eslint/only-throw-error': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
    },
  },
  {
    files: ['.scripts/**/*.mjs'],
    plugins: { '@typescript-eslint': tseslint.plugin },
    languageOptions: {
      parser: tseslint.parser,
      parserOptions: { project: '.scripts/tsconfig.json', tsconfigRootDir: import.meta.dirname + '/..' },
    },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/no-floating-promises': ['error', { ignoreVoid: false }],
    },
  },
  {
    // what a file says meets these: none may take more than a few steps for each character
    files: ['client/src/**/*.ts', 'server/src/**/*.ts'],
    plugins: { regexp },
    rules: {
      'regexp/no-super-linear-backtracking': ['error', { report: 'potential' }],
      'regexp/no-super-linear-move': ['error', { report: 'potential' }],
    },
  },
  {
    files: ['server/src/**/*.ts'],
    ignores: ['server/src/editor/**', 'server/src/terminal/**'],
    rules: {
      // a date that is given may be reckoned with
      'no-restricted-syntax': [
        'error',
        { selector: 'NewExpression[callee.name="Date"][arguments.length=0]', message: noClock },
        { selector: 'CallExpression[callee.name="Date"]', message: noClock },
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Date', property: 'now', message: noClock },
        { object: 'Math', property: 'random', message: 'Take randomness as an argument.' },
      ],
    },
  },
)
