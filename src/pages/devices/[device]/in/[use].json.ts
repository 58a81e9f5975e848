import type { APIRoute } from 'astro';
import { figuresJson } from '../../../../building/figures-json.ts';
import { devicePaths, referenceDevices } from '../../../../device-view/reference.ts';
import type { DeviceRow, UseRow } from '../../../../schemas/devices.ts';
import { edition } from '../../../../text/edition.ts';

export const getStaticPaths = devicePaths;

/** The assessments of one page about a device at the usual numbers, SI units. */
export const GET: APIRoute<{ device: DeviceRow; use: UseRow }> = ({ props }) => {
  const { device, use } = props;
  const standIns = referenceDevices(device, use).map(
    ({ device: one, verdict, worst, findings }) => ({
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
    }),
  );
  const page = {
    device: device.id,
    use: use.id,
    edition: edition.version,
    licence: edition.dataLicence,
    standIns,
  };
  return new Response(figuresJson(page));
};
