import type { APIRoute } from 'astro';
import { csvOf, tablePaths, type TableName } from '../../text/open-data.ts';

export const getStaticPaths = tablePaths;

export const GET: APIRoute<{ name: TableName }> = ({ props }) => new Response(csvOf(props.name));
