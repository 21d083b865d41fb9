/** The address of a server that listens there; an address of IPv6 stands in brackets. */
export function listeningOrigin(host: string, port: number): string {
  return `http://${host.includes(':') ? `[${host}]` : host}:${port}`;
}
