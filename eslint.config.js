import js from '@eslint/js'
import svelte from 'eslint-plugin-svelte'
import globals from 'globals'
import ts from 'typescript-eslint'
import { words } from './scripts/lint/words-apart.mjs'

/** The pure rooms: no page, no clock, no chance, no store. Dates and ids come in as arguments. */
const PURE = [
  'units',
  'geometry',
  'measurements',
  'capture',
  'draft',
  'fitting',
  'rounds',
  'output',
  'layout',
  'handover',
]
/** No words of a page: read by the commands only, which speak English; said by device to device. */
const NOT_OF_A_PAGE = [
  'src/fitting/reaches.ts',
  'src/fitting/ops/at-cap.ts',
  'src/fitting/rules/case.ts',
  'src/handover/{candidate,proof,word-list}.ts',
  'src/storage/migrations/**',
  'src/storage/corrections-by-hand.ts',
  'src/storage/read-draft-input.ts',
  'src/storage/schema/draft-input.ts',
  'src/storage/schema/draft-numbers.ts',
  // Writers of file formats, and the names these have.
  'src/output/{pdf,pdf-content,dxf-writer}.ts',
]
const EDGES = ['src/capture/detector*.ts', 'src/capture/photo.ts', 'src/capture/camera-worker.ts']

export default ts.config(
  {
    ignores: [
      'dist',
      'node_modules',
      'public',
      'test-results',
      'playwright-report',
      '.cache',
      '.svelte-check',
    ],
  },
  js.configs.recommended,
  ...ts.configs.recommended,
  ...svelte.configs.recommended,
  { languageOptions: { globals: { ...globals.browser, ...globals.node } } },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser } },
  },
  {
    rules: {
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_' },
      ],
      '@typescript-eslint/no-explicit-any': 'error',
      'svelte/no-navigation-without-resolve': 'off',
      eqeqeq: 'error',
      'no-restricted-syntax': [
        'error',
        { selector: 'ExportAllDeclaration', message: 'Name what you export: no barrels.' },
        { selector: 'ExportDefaultDeclaration > ClassDeclaration', message: 'Named exports only.' },
      ],
    },
  },
  {
    files: ['src/**/*.{ts,svelte}'],
    ignores: ['**/*.words.ts', '**/*.words.*.ts', '**/*sources.ts', ...NOT_OF_A_PAGE],
    plugins: { words },
    rules: { 'words/apart': 'error' },
  },
  {
    files: PURE.map((room) => `src/${room}/**/*.ts`),
    ignores: EDGES,
    rules: {
      'no-restricted-globals': [
        'error',
        ...[
          'window',
          'document',
          'navigator',
          'localStorage',
          'indexedDB',
          'fetch',
          'Date',
          'setTimeout',
          'setInterval',
          'crypto',
          'performance',
        ].map((name) => ({
          name,
          message: `The pure rooms do not use ${name}; pass what you need as an argument.`,
        })),
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'Pass a seeded generator instead.' },
      ],
    },
  },
)
