import type { APIRoute } from 'astro';
import { figuresJson } from '../../../../building/figures-json.ts';
import { edition } from '../../../../text/edition.ts';
import { pairPaths, referenceStandIns } from '../../../../substitution/reference.ts';

export const getStaticPaths = () => pairPaths().filter(({ props }) => props.pairing.met);

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
  return new Response(figuresJson(page));
};
