import type { APIRoute } from 'astro';
import { rowsOf, tablePaths, type TableName } from '../../text/open-data.ts';

export const getStaticPaths = tablePaths;

export const GET: APIRoute<{ name: TableName }> = ({ props }) =>
  new Response(JSON.stringify(rowsOf(props.name)));
