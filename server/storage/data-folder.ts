/** What nobody can keep a record in, as a sentence for whoever chose it. */
export class DataFolderUnusable extends Error {}

const notWritable = (folder: string) =>
  `The data folder ${folder} cannot be written. Give its owner the right to write, or choose another with ARAKABE_DATA.`;
const noFolder = (folder: string) =>
  `${folder} cannot be the data folder: it is a file, or lies below one. Choose another with ARAKABE_DATA.`;

/** By the codes of the operating system. */
const SENTENCES: Record<string, (folder: string) => string> = {
  EACCES: notWritable,
  EPERM: notWritable,
  EROFS: notWritable,
  EEXIST: noFolder,
  ENOTDIR: noFolder,
};

/** Does what a start needs in the data folder. Throws DataFolderUnusable where the folder stands in its way. */
export async function inDataFolder<T>(folder: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (cause) {
    const say = SENTENCES[(cause as NodeJS.ErrnoException).code ?? ''];
    throw say ? new DataFolderUnusable(say(folder), { cause }) : cause;
  }
}
