import { PluginKind, declareValuePlugin } from '@stryker-mutator/api/plugin';

/** Words that are shown: a space in a text tells them from ids, keys and units. */
const isProse = (text) => /\p{L}.*\s|\s.*\p{L}/su.test(text);

/** Whether a text with gaps only puts names into its gaps, so that nothing is decided in them. */
const isPlain = ({ expressions }) =>
  expressions.every(({ type }) => type === 'Identifier' || type === 'MemberExpression');

/**
 * Leaves out mutants that empty a sentence. Which words a working uses is for people to judge; a
 * test that repeats a sentence would only hold the sentence to itself. Ids, keys, units and
 * single words stay in, and so does all that is worked out inside a sentence.
 */
export const strykerPlugins = [
  declareValuePlugin(PluginKind.Ignore, 'prose', {
    shouldIgnore({ node }) {
      const prose =
        (node.type === 'StringLiteral' && isProse(node.value)) ||
        (node.type === 'TemplateLiteral' &&
          isPlain(node) &&
          isProse(node.quasis.map(({ value }) => value.raw).join('x')));
      return prose ? 'words of a sentence' : undefined;
    },
  }),
];
