/** The address or the port at which the program should listen cannot be had. */
export class CannotListen extends Error {
  constructor(host: string, port: number, cause: NodeJS.ErrnoException) {
    super(SENTENCES[cause.code ?? '']?.(host, port) ?? `Arakabe cannot listen at ${host}: ${cause.message}`, {
      cause,
    });
  }
}

const noAddress = (host: string) =>
  `There is no address “${host}” on this machine to listen at. Set HOST to one that it has, such as 127.0.0.1.`;

/** By the codes of the operating system. */
const SENTENCES: Record<string, (host: string, port: number) => string> = {
  EADDRINUSE: (_, port) => `Port ${port} is taken by another program. Choose another one with PORT.`,
  EACCES: (_, port) => `Port ${port} may not be used by whoever runs this. Choose one above 1023 with PORT.`,
  ENOTFOUND: noAddress,
  EAI_AGAIN: noAddress,
  EADDRNOTAVAIL: noAddress,
  EAFNOSUPPORT: noAddress,
  EINVAL: noAddress,
};
