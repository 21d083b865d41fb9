import type { ReactNode } from 'react';
import type { UseQueryResult } from '@tanstack/react-query';
import { isSignedOut } from '../api/errors.ts';
import { useWords } from '../i18n/use-words.ts';
import { Button } from './button.tsx';
import { ProblemNotice } from './notice.tsx';
import { Spinner } from './spinner.tsx';

export interface QueryStateProps<T> {
  query: UseQueryResult<T>;
  children: (data: T) => ReactNode;
}

/** Loading, failed (with another try), or the answer. An answer that has been seen stays while a refresh fails. */
export function QueryState<T>({ query, children }: QueryStateProps<T>) {
  const { t } = useWords();
  const retry = <Button onPress={() => void query.refetch()}>{t('common.tryAgain')}</Button>;
  if (query.data === undefined) {
    return query.isError ? <ProblemNotice error={query.error} actions={retry} /> : <Spinner />;
  }
  // That nobody is signed in any more is said once for the whole window.
  const isWorthSaying = query.isError && !isSignedOut(query.error);
  return (
    <>
      {isWorthSaying ? <ProblemNotice error={query.error} actions={retry} /> : null}
      {children(query.data)}
    </>
  );
}
