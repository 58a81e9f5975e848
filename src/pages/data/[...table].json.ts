import type { APIRoute } from 'astro';
import { rowsOf, stemOf, tableNames } from '../../text/open-data.ts';

export const getStaticPaths = () =>
  tableNames.map((name) => ({ params: { table: stemOf(name) }, props: { name } }));

export const GET: APIRoute<{ name: (typeof tableNames)[number] }> = ({ props }) =>
  new Response(JSON.stringify(rowsOf(props.name)));
