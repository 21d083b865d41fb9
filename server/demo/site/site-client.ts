const API = '/api/v1';

/** Somebody who uses the public API over HTTP as a browser does: with a cookie, in JSON. */
export class SiteClient {
  #cookie = '';

  constructor(private readonly origin: string) {}

  get<T>(path: string): Promise<T> {
    return this.#send<T>('GET', path, {});
  }

  send<T>(method: 'POST' | 'PUT', path: string, body: unknown): Promise<T> {
    const headers = { 'content-type': 'application/json' };
    return this.#send<T>(method, path, { headers, body: JSON.stringify(body) });
  }

  sendText<T>(path: string, type: string, text: string): Promise<T> {
    return this.#send<T>('POST', path, { headers: { 'content-type': type }, body: text });
  }

  sendPhoto<T>(path: string, name: string, bytes: Uint8Array): Promise<T> {
    const form = new FormData();
    form.append('photos', new Blob([Uint8Array.from(bytes)]), name);
    return this.#send<T>('POST', path, { body: form });
  }

  /** What a browser must be given to be signed in as this person: the whole Set-Cookie line. */
  get signedIn(): string {
    return this.#cookie;
  }

  async #send<T>(method: string, path: string, init: RequestInit): Promise<T> {
    const headers = new Headers(init.headers);
    if (this.#cookie) headers.set('cookie', this.#cookie.split(';')[0] ?? '');
    const response = await fetch(`${this.origin}${API}${path}`, { ...init, method, headers });
    const cookie = response.headers.getSetCookie().find((line) => !/^[^=]+=(;|$)/.test(line));
    if (cookie) this.#cookie = cookie;
    const text = await response.text();
    if (!response.ok) throw new Error(`${method} ${path}: ${response.status} ${text}`);
    return (text === '' ? undefined : JSON.parse(text)) as T;
  }
}
