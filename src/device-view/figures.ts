import type { DeviceAssessment } from '../engine/index.ts';
import { edition } from '../text/edition.ts';

/** What stands in the JSON beside the page of a device in a use: its assessments at the usual numbers, SI units. */
export const deviceFigures = (
  device: string,
  use: string,
  assessments: readonly DeviceAssessment[],
): object => ({
  device,
  use,
  edition: edition.version,
  licence: edition.dataLicence,
  standIns: assessments.map(({ device: one, verdict, worst, findings }) => ({
    device: one.id,
    verdict,
    worst,
    findings: findings.map(
      ({ demand, finding, unit, limit, original, standIn, verdict: own, sure, sources }) => ({
        demand,
        finding,
        unit,
        limit,
        original,
        standIn,
        verdict: own,
        sure,
        sources,
      }),
    ),
  })),
});
