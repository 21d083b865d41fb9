/** Where somebody wanted to go before signing in; only paths of this program, never another site. */
export function cameFrom(state: unknown): string {
  if (typeof state !== 'object' || state === null || !('from' in state)) return '/';
  const { from } = state;
  return typeof from === 'string' && /^\/(?![/\\])/.test(from) ? from : '/';
}
