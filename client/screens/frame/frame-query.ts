import { amendedQuery } from '../../api/amended-query.ts';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { amendFrame } from './amend-frame.ts';

export const frameQuery = (house: string) =>
  amendedQuery({
    house,
    queryKey: keys.frame(house),
    readWhole: (signal) => call('readFrame', { params: { house }, signal }),
    readPart: (photo, signal) => call('readFrameOfPhoto', { params: { photo }, signal }),
    amend: amendFrame,
  });
