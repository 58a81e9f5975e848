import type { APIRoute } from 'astro';
import { edition } from '../../../../text/edition.ts';
import { pairPaths, referenceStandIns } from '../../../../substitution/reference.ts';

export const getStaticPaths = () => pairPaths().filter(({ props }) => props.pairing.met);

/** Significant digits that figures are written with: more would only pretend. */
const DIGITS = 3;

const short = (_key: string, value: unknown): unknown =>
  typeof value === 'number' && Number.isFinite(value) ? Number(value.toPrecision(DIGITS)) : value;

/** The assessments of one substitution page at reference conditions, SI units. */
export const GET: APIRoute = ({ params }) => {
  const { type = '', position = '' } = params;
  const assessments = referenceStandIns(type, position);
  const demands = (assessments[0]?.findings ?? []).map(
    ({ demand, finding, weight, unit, limit, original }) => ({
      demand,
      finding,
      weight,
      unit,
      limit,
      original,
    }),
  );
  const standIns = assessments.map(({ candidate, verdict, worst, findings }) => ({
    ...candidate,
    verdict,
    worst,
    findings: Object.fromEntries(
      findings.map(({ demand, standIn, verdict: own, sure }) => [
        demand,
        { ...standIn, verdict: own, sure },
      ]),
    ),
  }));
  const sources = [
    ...new Set(assessments.flatMap(({ findings }) => findings.flatMap((one) => one.sources))),
  ];
  const page = {
    type,
    position,
    edition: edition.version,
    licence: edition.dataLicence,
    demands,
    standIns,
    sources,
  };
  return new Response(JSON.stringify(page, short));
};
