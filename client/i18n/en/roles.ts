export const roles = {
  title: 'Not with your role',
  text: 'Your role in this house is {{role}}. This page changes the record, which your role does not allow. Ask the keeper of the record.',
} as const;
