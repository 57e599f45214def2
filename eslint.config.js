import javascript from '@eslint/js';
import { configs as lit } from 'eslint-plugin-lit';
import { defineConfig, globalIgnores } from 'eslint/config';
import { configs as typescript } from 'typescript-eslint';

export default defineConfig(
  globalIgnores(['dist/', 'node_modules/']),
  javascript.configs.recommended,
  typescript.strictTypeChecked,
  typescript.stylisticTypeChecked,
  lit['flat/recommended'],
  {
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      'eqeqeq': 'error',
      // A sentence, which is the key of a catalogue, stays in one piece.
      'max-len': ['error', { code: 120, ignoreUrls: true, ignoreStrings: true, ignoreTemplateLiterals: true, ignoreRegExpLiterals: true }],
      'quotes': ['error', 'single', { avoidEscape: true }],
      'semi': 'error',
      // No enum compiles here (`erasableSyntaxOnly`), and to look for them takes a sixth of the style check.
      '@typescript-eslint/no-unsafe-enum-assignment': 'off',
      // The type check knows every name.
      'no-undef': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      // An index that a loop has just checked is known to be there, which the type check cannot see.
      '@typescript-eslint/no-non-null-assertion': 'off',
      // A row is a record of keys, and clearing a cell takes its key away.
      '@typescript-eslint/no-dynamic-delete': 'off',
    },
  },
);
