/** Lets at most `places` works run at once: a whole decoded picture takes hundreds of megabytes. */
export function inTurn(places: number): <T>(work: () => Promise<T>) => Promise<T> {
  const waiting: (() => void)[] = [];
  let free = places;
  return async (work) => {
    if (free > 0) free -= 1;
    else await new Promise<void>((go) => waiting.push(go));
    try {
      return await work();
    } finally {
      const next = waiting.shift();
      if (next) next();
      else free += 1;
    }
  };
}
