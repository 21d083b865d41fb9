import { afterAll, beforeAll, expect, it } from 'vitest';
import { ROUTES, type Route } from '#domain/contract/routes';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { startServer, type TestServer } from '../support/server.ts';

interface Document {
  openapi: string;
  paths: Record<string, Record<string, { operationId: string; parameters: { name: string; in: string }[] }>>;
}

describeOverEitherDatabase('the API contract', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  it('describes itself in OpenAPI 3.1, every route with its path parameters', async () => {
    const document = await server.anonymous().get<Document>('/openapi.json');
    expect(document.openapi).toBe('3.1.0');
    const described = Object.entries(document.paths).flatMap(([path, methods]) =>
      Object.entries(methods).map(
        ([method, { operationId }]) => `${method.toUpperCase()} ${path} ${operationId}`,
      ),
    );
    const contract = Object.entries(ROUTES).map(([name, { method, path }]) => `${method} ${path} ${name}`);
    expect(described.sort()).toEqual(contract.sort());
    for (const [path, methods] of Object.entries(document.paths))
      for (const { parameters } of Object.values(methods)) {
        const named = parameters
          .filter((parameter) => parameter.in === 'path')
          .map((parameter) => `{${parameter.name}}`);
        expect(named).toEqual(path.match(/\{\w+\}/g) ?? []);
      }
    expect(JSON.stringify(document)).not.toContain('#/$defs');
  });

  it('serves every route of the contract: none answers that the address is unknown', async () => {
    for (const [name, route] of Object.entries(ROUTES) as [string, Route][]) {
      const address = route.path.replace(/\{\w+\}/g, '00000000-0000-4000-8000-000000000000');
      const response = await server.anonymous().raw(route.method, address);
      const problem = response.ok ? {} : ((await response.json()) as { params?: { what?: string } });
      expect(problem.params?.what, name).not.toBe('address');
    }
  });

  it('lets nobody without an account past the routes that are open to anyone', async () => {
    for (const route of Object.values(ROUTES) as Route[]) {
      if (route.access === 'anyone') continue;
      const address = route.path.replace(/\{\w+\}/g, '00000000-0000-4000-8000-000000000000');
      const response = await server.anonymous().raw(route.method, address);
      expect(response.status, `${route.method} ${route.path}`).toBe(401);
      expect(response.headers.get('content-type')).toContain('application/problem+json');
    }
  });

  it('answers an unknown address with a problem document', async () => {
    const response = await server.anonymous().raw('GET', '/nowhere');
    expect(response.status).toBe(404);
    expect(await response.json()).toMatchObject({
      code: 'not-found',
      status: 404,
      type: 'urn:arakabe:problem:not-found',
    });
  });

  it('keeps an idle connection longer than the minute after which a proxy gives it up', async () => {
    // nginx, `keepalive_timeout` of an upstream: 60 s (its documentation, from memory).
    const response = await server.anonymous().raw('GET', '/session');
    const [, seconds] = /timeout=(\d+)/.exec(response.headers.get('keep-alive') ?? '') ?? [];
    expect(Number(seconds)).toBeGreaterThan(60);
  });

  it('answers a broken body and wrong values with what is wrong and where', async () => {
    const post = (body: string, type = 'application/json') =>
      server.owner.raw('POST', '/houses', { body, headers: { 'content-type': type } });
    expect(await (await post('{"name":')).json()).toMatchObject({ status: 400, code: 'invalid-json' });
    expect(await (await post('name=x', 'application/x-www-form-urlencoded')).json()).toMatchObject({
      status: 415,
    });
    const wrong = await (await post('{"id":"1","name":"","zone":"Asia/Tokyo","colour":"red"}')).json();
    expect(wrong).toMatchObject({ status: 400, code: 'invalid-request' });
    const paths = (wrong as { errors: { path: string }[] }).errors.map((error) => error.path);
    expect(paths).toContain('body.id');
    expect(paths).toContain('body.name');
  });

  it('refuses changes that another site asks a browser for', async () => {
    const headers = {
      'content-type': 'application/json',
      'sec-fetch-site': 'cross-site',
      origin: 'https://elsewhere.example',
    };
    const response = await server.owner.raw('POST', '/houses', { body: '{}', headers });
    expect(await response.json()).toMatchObject({ status: 403, code: 'cross-site-request' });
  });
});
