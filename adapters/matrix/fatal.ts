/** What trying again cannot mend: told on standard error, and the end with status 78 (`sysexits.h`, configuration). */
export class Fatal extends Error {
  override readonly name = 'Fatal';
}

export const configurationStatus = 78;
