import { useRef, useState, type DragEvent } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { droppedFiles } from '../../upload/dropped-files.ts';
import { useNoStrayDrops, useUploads } from '../../upload/use-uploads.ts';

const ACCEPT = 'image/*,.heic,.heif,.avif,.tif,.tiff';

/** Where photos come in: chosen in the system's own dialog, or dropped, folders too. */
export function AddPhotos({ house }: { house: string }) {
  const { t } = useWords();
  const { add } = useUploads(house);
  const input = useRef<HTMLInputElement>(null);
  const [isOver, setIsOver] = useState(false);
  useNoStrayDrops();
  const drop = async (event: DragEvent) => {
    event.preventDefault();
    setIsOver(false);
    add(await droppedFiles(event.dataTransfer));
  };
  return (
    <section
      className={isOver ? 'photos-drop photos-drop-over' : 'photos-drop'}
      aria-label={t('photos.add')}
      onDragOver={(event) => {
        event.preventDefault();
        setIsOver(true);
      }}
      onDragLeave={() => setIsOver(false)}
      onDrop={(event) => void drop(event)}
    >
      <input
        ref={input}
        type="file"
        name="photos"
        multiple
        hidden
        accept={ACCEPT}
        onChange={({ target }) => {
          add([...(target.files ?? [])]);
          // Choosing the same files again must be heard, too.
          target.value = '';
        }}
      />
      <div className="row">
        <Button look="act" onPress={() => input.current?.click()}>
          {t('photos.choose')}
        </Button>
        <span className="soft photos-drop-hint">{isOver ? t('photos.drop') : t('photos.chooseHint')}</span>
      </div>
    </section>
  );
}
