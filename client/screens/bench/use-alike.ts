import { useQuery } from '@tanstack/react-query';
import type { Answer } from '#domain/contract/routes';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';

export type Alike = Answer<'alikePhotos'>;

/** Photos nearly the same as this one; undefined until known. */
export function useAlike(house: string, photo: string): Alike | undefined {
  const { data } = useQuery({
    queryKey: keys.alike(house, photo),
    queryFn: ({ signal }) => call('alikePhotos', { params: { photo }, signal }),
  });
  return data;
}
