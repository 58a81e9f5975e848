import type { Job } from '../job/index.ts';
import { h } from '../markup/node.ts';
import type { Element } from '../markup/node.ts';

/**
 * What heads every paper of a job: which board it is, when it was printed and where it was made.
 * @param address of the page
 */
export const paperHead = (
  { title, equipment, note }: Job,
  { address, now }: { address: string; now: Date },
): Element[] => [
  h('p', {}, h('strong', {}, title || 'Job without a title')),
  ...[equipment, note].filter((text) => text.trim() !== '').map((text) => h('p', {}, text)),
  h(
    'p',
    { class: 'small' },
    `Printed ${now.toISOString().slice(0, 16).replace('T', ' ')} UTC from ${address}`,
  ),
];
