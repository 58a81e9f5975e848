import type { Job } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';

/** What heads every paper of a job: which board it is. When and where it was printed every page says. */
export const paperHead = ({ title, equipment, note }: Job): Element[] => [
  h('p', {}, h('strong', {}, title || 'Job without a title')),
  ...[equipment, note].filter((text) => text.trim() !== '').map((text) => h('p', {}, text)),
];
