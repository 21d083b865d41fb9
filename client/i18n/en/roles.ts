export const roles = {
  title: 'Your role does not allow this',
  text: 'This page changes the record, and your role in this house is {{role}}. If something must be changed, ask the keeper of the record.',
} as const;
