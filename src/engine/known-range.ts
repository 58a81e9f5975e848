import type { Knowledge } from './catalogue.ts';
import type { Range } from './quantities/range.ts';

/** The range of a property, SI; nothing where no figure is known or none applies. */
export const knownRange = (knowledge: Knowledge | undefined): Range | undefined =>
  knowledge?.status === 'known' ? knowledge.range : undefined;
