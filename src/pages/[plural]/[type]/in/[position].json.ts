import type { APIRoute } from 'astro';
import { figuresJson } from '../../../../building/figures-json.ts';
import { kindPairPaths, kindReference } from '../../../../substitution/kind-reference.ts';
import { edition } from '../../../../text/edition.ts';

export const getStaticPaths = kindPairPaths;

/** The assessments of one page about a kind of part at reference conditions, SI units. */
export const GET: APIRoute = ({ params }) => {
  const { type = '', position = '' } = params;
  const assessments = kindReference(type, position);
  const standIns = assessments.map(({ candidate, verdict, worst, findings }) => ({
    ...candidate,
    verdict,
    worst,
    findings: Object.fromEntries(
      findings.map(({ demand, standIn, limit, verdict: own, sure }) => [
        demand,
        { ...standIn, limit, verdict: own, sure },
      ]),
    ),
  }));
  const page = {
    type,
    position,
    edition: edition.version,
    licence: edition.dataLicence,
    standIns,
    sources: [...new Set(assessments.flatMap((one) => one.findings.flatMap((f) => f.sources)))],
  };
  return new Response(figuresJson(page));
};
