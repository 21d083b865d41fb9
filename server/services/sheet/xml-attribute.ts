const ATTRIBUTE = /([\w.:-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/gu;

/**
 * The value of an attribute in the text of an opening tag, with or without prefix, entities as they
 * stand; null where it is absent, '' where it is said more than once and readers might differ.
 */
export function attribute(attributes: string, wanted: string): string | null {
  const values = [...attributes.matchAll(ATTRIBUTE)]
    .filter(([, name = '']) => name === wanted || name.endsWith(`:${wanted}`))
    .map(([, , double, single]) => double ?? single ?? '');
  const [first = null] = values;
  return values.length > 1 ? '' : first;
}
