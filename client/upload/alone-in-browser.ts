/**
 * Runs `work` while no other window of this browser runs any of the same name; should that window end,
 * its lock is free. On plain-http origins there are no locks: then two windows may send the same file at
 * the same time, and the server recognises the second.
 */
export async function aloneInBrowser<T>(name: string, work: () => Promise<T>): Promise<T> {
  const { locks } = navigator as { locks?: LockManager };
  return locks ? locks.request(`arakabe.photo.${name}`, work) : work();
}
