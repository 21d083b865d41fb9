/** Marks named in a sentence: how many, and the first of them. */
const NAMED = 20;

export function someMarks(marks: readonly string[]): { count: number; marks: string } {
  return { count: marks.length, marks: marks.slice(0, NAMED).join(', ') };
}
