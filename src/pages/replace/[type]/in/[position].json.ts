import type { APIRoute } from 'astro';
import { edition } from '../../../../text/edition.ts';
import { pairPaths, referenceStandIns } from '../../../../substitution/reference.ts';

export const getStaticPaths = () => pairPaths().filter(({ props }) => props.pairing.met);

/** Significant digits that figures are written with: more would only pretend. */
const DIGITS = 4;

const short = (_key: string, value: unknown): unknown =>
  typeof value === 'number' && Number.isFinite(value) ? Number(value.toPrecision(DIGITS)) : value;

/** The assessments of one substitution page at reference conditions, SI units. */
export const GET: APIRoute = ({ params }) => {
  const { type = '', position = '' } = params;
  const standIns = referenceStandIns(type, position).map(
    ({ candidate, verdict, worst, findings }) => ({
      candidate,
      verdict,
      worst,
      findings: findings.map(
        ({ demand, unit, original, standIn, limit, margin, verdict: own, sources }) => ({
          demand,
          unit,
          original,
          standIn,
          limit,
          margin,
          verdict: own,
          sources,
        }),
      ),
    }),
  );
  const page = { type, position, edition: edition.version, licence: edition.dataLicence, standIns };
  return new Response(JSON.stringify(page, short));
};
