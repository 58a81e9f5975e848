import astro from 'eslint-plugin-astro';
import tseslint from 'typescript-eslint';

/** Text that comes from an address, a file or a person must never be parsed as HTML. */
const unsafeHtml = ['innerHTML', 'outerHTML'].map((name) => ({
  selector: `AssignmentExpression[left.property.name='${name}']`,
  message: `Build elements instead of assigning ${name}.`,
}));

/** An object with a getter of its own has a hidden class of its own, which keeps all it knows in memory. */
const ownGetter = {
  selector: "ObjectExpression > Property[kind='get']",
  message: 'Make it a function, or a class whose objects share their getters.',
};

export default tseslint.config(
  {
    ignores: [
      'dist/',
      '.astro/',
      'node_modules/',
      'test-results/',
      'playwright-report/',
      'reports/',
      '.stryker-tmp/',
    ],
  },
  ...tseslint.configs.strict,
  ...tseslint.configs.stylistic,
  ...astro.configs['flat/recommended'],
  {
    rules: {
      eqeqeq: 'error',
      'no-duplicate-imports': 'error',
      'max-lines': ['error', { max: 400, skipComments: true, skipBlankLines: true }],
      complexity: ['error', 16],
      'no-restricted-syntax': ['error', ...unsafeHtml, ownGetter],
      '@typescript-eslint/consistent-type-definitions': 'off',
    },
  },
);
