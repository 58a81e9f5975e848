import { loadCatalogue } from '../../src/catalogue/index.ts';
import { newPlanCache, planJob, type Plan } from '../../src/job/index.ts';
import { emptyJob, emptyLine, type Job, type Line } from '../../src/job/model/job.ts';

/** Boards of a few invented lines, and their plans by the whole catalogue. */

export const catalogue = loadCatalogue();
export const catalogueAt = () => catalogue;

/** A job of some lines. */
export const jobOf = (...lines: Line[]): Job => ({ ...emptyJob('test', new Date(0)), lines });

/** A line of a capacitor that is to be replaced. */
export const line = (designators: string, said: Partial<Line>): Line => ({
  ...emptyLine(designators),
  designators,
  kind: 'capacitor',
  decision: 'replace',
  ...said,
});

const cache = newPlanCache();

/** The plan of a job, as its lines are typed. */
export const planned = (job: Job): Plan => planJob(job, { catalogueAt, cache });

/** What lines say of parts that one meets on any board. */
export const film = {
  type: 'pet-metallized',
  value: '100 nF',
  volts: '63 V',
  position: 'tone-stack',
};
export const can = {
  type: 'al-electrolytic-wet',
  value: '10 µF',
  volts: '25 V',
  position: 'bulk-rail',
};
export const other = { kind: 'resistor', value: '4k7', tolerance: '5 %' };
