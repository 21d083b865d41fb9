import { useRef } from 'react';
import { newId } from './new-id.ts';

/**
 * The id of a thing that a form is about to make. It stays while the content stays, so that sending
 * again after a lost answer repeats nothing; other content is another thing.
 */
export function useStableId(): (content: unknown) => string {
  const last = useRef({ content: '', id: '' });
  return (content) => {
    const text = JSON.stringify(content);
    if (last.current.id === '' || last.current.content !== text)
      last.current = { content: text, id: newId() };
    return last.current.id;
  };
}
