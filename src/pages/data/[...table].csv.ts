import type { APIRoute } from 'astro';
import { csvOf, stemOf, tableNames } from '../../text/open-data.ts';

export const getStaticPaths = () =>
  tableNames.map((name) => ({ params: { table: stemOf(name) }, props: { name } }));

export const GET: APIRoute<{ name: (typeof tableNames)[number] }> = ({ props }) =>
  new Response(csvOf(props.name));
