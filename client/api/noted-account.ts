/**
 * Whose cookie this browser holds, as the windows of it tell each other: all of them send with the same
 * one, whoever signed in last. Undefined where the browser keeps nothing, or nobody has noted anything.
 */

const KEY = 'arakabe.account';

export function noteAccount(id: string | null): void {
  try {
    localStorage.setItem(KEY, id ?? '');
  } catch {
    // Then each window knows only what it was told itself.
  }
}

export function notedAccount(): string | null | undefined {
  try {
    const noted = localStorage.getItem(KEY);
    return noted === null ? undefined : noted || null;
  } catch {
    return undefined;
  }
}

/** False once another window has said that somebody else, or nobody, is signed in. */
export function isStillHere(account: string): boolean {
  const noted = notedAccount();
  return noted === undefined || noted === account;
}

/** Calls back when another window has noted something. Returns how to stop. */
export function onNoted(heard: () => void): () => void {
  const listen = ({ key }: StorageEvent) => {
    if (key === KEY || key === null) heard();
  };
  window.addEventListener('storage', listen);
  return () => window.removeEventListener('storage', listen);
}
