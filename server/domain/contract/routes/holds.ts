import { z } from 'zod';
import { RefusalRequest, ReleaseRequest } from '../hold.ts';
import { ReleaseView, ReviewView } from '../review-views.ts';
import { line, paragraph } from '../shapes.ts';
import { CoveringView, HouseView, TagView } from '../views.ts';
import { route, type Route } from './route.ts';

const because = z.strictObject({ reason: line(1000) });

/** The hold before a covering closes: ready for inspection, released or refused. */
export const HOLD_ROUTES = {
  stateReleaseRule: route({
    method: 'PUT',
    path: '/houses/{house}/release-rule',
    summary: 'Say whether nobody may release what they alone recorded.',
    access: 'rule',
    body: because.extend({ fourEyes: z.boolean() }),
    status: 200,
    answer: HouseView,
  }),
  readyCovering: route({
    method: 'POST',
    path: '/coverings/{covering}/ready',
    summary: 'Say that a covering is ready for inspection.',
    access: 'record',
    body: z.strictObject({ note: paragraph(2000).default('') }),
    status: 200,
    answer: CoveringView,
  }),
  withdrawReady: route({
    method: 'DELETE',
    path: '/coverings/{covering}/ready',
    summary: 'Take back that a covering is ready for inspection.',
    access: 'record',
    query: because,
    status: 200,
    answer: CoveringView,
  }),
  readReview: route({
    method: 'GET',
    path: '/coverings/{covering}/review',
    summary: 'What a covering will hide, member by member, with the evidence for it.',
    access: 'read',
    status: 200,
    answer: ReviewView,
  }),
  releaseCovering: route({
    method: 'POST',
    path: '/coverings/{covering}/releases',
    summary: 'Release a covering: it may close.',
    access: 'review',
    body: ReleaseRequest,
    status: 201,
    answer: ReleaseView,
  }),
  refuseCovering: route({
    method: 'POST',
    path: '/coverings/{covering}/refusal',
    summary: 'Refuse a covering, with what is missing.',
    access: 'review',
    body: RefusalRequest,
    status: 200,
    answer: CoveringView,
  }),
  readRelease: route({
    method: 'GET',
    path: '/releases/{release}',
    summary: 'A release, with what it rests on and what has changed since.',
    access: 'read',
    status: 200,
    answer: ReleaseView,
  }),
  releaseSheet: route({
    method: 'GET',
    path: '/releases/{release}/sheet',
    summary: 'A release on paper, with its pictures.',
    access: 'read',
    query: z.object({ lang: z.enum(['en', 'ja']).default('en') }),
    status: 200,
    produces: ['application/pdf'],
  }),
  withdrawRelease: route({
    method: 'DELETE',
    path: '/releases/{release}',
    summary: 'Take a release back. It stays on record.',
    access: 'review',
    query: because,
    status: 200,
    answer: ReleaseView,
  }),
  disputeTag: route({
    method: 'POST',
    path: '/tags/{tag}/dispute',
    summary: 'Doubt a tag: it counts as no record until somebody answers.',
    access: 'review',
    body: because,
    status: 200,
    answer: TagView,
  }),
} as const satisfies Record<string, Route>;
