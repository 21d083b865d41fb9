import { z } from 'zod';
import { rolesThatMay } from '#domain/contract/acts';
import { PROBLEMS, ProblemShape } from '#domain/contract/problems';
import { ROUTES, type Route } from '#domain/contract/routes';

type Document = Record<string, unknown>;

/** OpenAPI 3.1 from the same contracts that the routes are served by. */
export function openApiDocument(version: string): Document {
  const paths: Record<string, Document> = {};
  for (const [name, route] of Object.entries(ROUTES) as [string, Route][])
    paths[route.path] = { ...paths[route.path], [route.method.toLowerCase()]: operation(name, route) };
  return {
    openapi: '3.1.0',
    info: { title: 'Arakabe', version, description: 'The record of a timber frame before it disappears.' },
    servers: [{ url: '/api/v1' }],
    paths,
    components: {
      schemas: { Problem: schema(ProblemShape, 'output') },
      securitySchemes: {
        session: { type: 'apiKey', in: 'cookie', name: 'arakabe.session_token' },
        token: { type: 'http', scheme: 'bearer' },
      },
    },
  };
}

function operation(name: string, route: Route): Document {
  return {
    operationId: name,
    summary: route.summary,
    ...whoMay(route),
    security: route.access === 'anyone' ? [] : [{ session: [] }, { token: [] }],
    parameters: [...pathParameters(route), ...queryParameters(route)],
    ...requestBody(route),
    responses: { [route.status]: response(route), default: problemResponse() },
  };
}

/** Who may, in words and, where a role is asked for, in `x-roles` for programs. */
function whoMay({ access }: Route): Document {
  if (access === 'anyone') return { description: 'For anyone.' };
  if (access === 'account') return { description: 'For anyone with an account.' };
  const roles = rolesThatMay(access);
  return { description: `For these roles in the house: ${roles.join(', ')}.`, 'x-roles': roles };
}

function pathParameters({ path }: Route): Document[] {
  return [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => ({
    name,
    in: 'path',
    required: true,
    schema: { type: 'string' },
  }));
}

function queryParameters({ query }: Route): Document[] {
  if (!query) return [];
  return Object.entries(query.shape).map(([name, shape]) => ({
    name,
    in: 'query',
    required: !(shape as z.ZodType).safeParse(undefined).success,
    schema: schema(shape as z.ZodType, 'input'),
  }));
}

function requestBody({ body, consumes }: Route): Document {
  if (body) return { requestBody: { required: true, content: json(body, 'input') } };
  if (!consumes) return {};
  const content = Object.fromEntries(consumes.map((type) => [type, { schema: rawSchema(type) }]));
  return { requestBody: { required: true, content } };
}

function rawSchema(type: string): Document {
  if (type !== 'multipart/form-data') return {};
  return {
    type: 'object',
    properties: { photos: { type: 'array', items: { type: 'string', format: 'binary' } } },
  };
}

function response({ answer, produces, summary }: Route): Document {
  const others = Object.fromEntries((produces ?? []).map((type) => [type, {}]));
  const content = { ...(answer && json(answer, 'output')), ...others };
  return { description: summary, ...(Object.keys(content).length > 0 && { content }) };
}

function problemResponse(): Document {
  const codes = Object.keys(PROBLEMS).join(', ');
  return {
    description: `A problem (RFC 9457). Codes: ${codes}.`,
    content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
  };
}

function json(shape: z.ZodType, io: 'input' | 'output'): Document {
  return { 'application/json': { schema: schema(shape, io) } };
}

/** Shapes stand inline: an answer is then whole where one reads it. */
function schema(shape: z.ZodType, io: 'input' | 'output'): Document {
  const { $schema: _, ...rest } = z.toJSONSchema(shape, { io, unrepresentable: 'any', reused: 'inline' });
  return inline(rest);
}

/** zod puts shapes with an id below $defs; a part of a document must not point at its own root. */
function inline(document: Document): Document {
  const defs = (document['$defs'] ?? {}) as Record<string, Document>;
  const resolve = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(resolve);
    if (value === null || typeof value !== 'object') return value;
    const ref = (value as Document)['$ref'];
    if (typeof ref === 'string') return resolve(defs[ref.replace('#/$defs/', '')] ?? {});
    const entries = Object.entries(value).filter(
      ([key, part]) => key !== '$defs' && !(key === 'id' && typeof part === 'string'),
    );
    return Object.fromEntries(entries.map(([key, part]) => [key, resolve(part)]));
  };
  return resolve(document) as Document;
}
