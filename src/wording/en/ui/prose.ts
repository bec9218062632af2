/** Words that an author's text is checked for. */
export const prose = {
  'claim.probably': 'probably',
};
