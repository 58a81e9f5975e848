import type { Assessment, KindAssessment, SourceId } from '../engine/index.ts';
import { edition } from '../text/edition.ts';

/** What stands in the JSON beside a substitution page, SI units. */

const about = (type: string, position: string) => ({
  type,
  position,
  edition: edition.version,
  licence: edition.dataLicence,
});

const sourcesOf = (assessments: readonly Pick<Assessment, 'findings'>[]): SourceId[] => [
  ...new Set(assessments.flatMap(({ findings }) => findings.flatMap((one) => one.sources))),
];

/** The assessments of the page of a capacitor at reference conditions. */
export const pairFigures = (
  type: string,
  position: string,
  assessments: readonly Assessment[],
): object => ({
  ...about(type, position),
  demands: (assessments[0]?.findings ?? []).map(
    ({ demand, finding, weight, unit, limit, original }) => ({
      demand,
      finding,
      weight,
      unit,
      limit,
      original,
    }),
  ),
  standIns: assessments.map(({ candidate, verdict, worst, findings }) => ({
    ...candidate,
    verdict,
    worst,
    findings: Object.fromEntries(
      findings.map(({ demand, standIn, verdict: own, sure }) => [
        demand,
        { ...standIn, verdict: own, sure },
      ]),
    ),
  })),
  sources: sourcesOf(assessments),
});

/** The assessments of the page of another kind of part at reference conditions. */
export const kindFigures = (
  type: string,
  position: string,
  assessments: readonly KindAssessment[],
): object => ({
  ...about(type, position),
  standIns: assessments.map(({ candidate, verdict, worst, findings }) => ({
    ...candidate,
    verdict,
    worst,
    findings: Object.fromEntries(
      findings.map(({ demand, standIn, limit, verdict: own, sure }) => [
        demand,
        { ...standIn, limit, verdict: own, sure },
      ]),
    ),
  })),
  sources: sourcesOf(assessments),
});
