export const handOn = {
  title: '人に渡す',
  copy: '位置と製造番号を除いた写し',
  copyWithPosition: '位置を含む写し',
  copyWithSerial: '製造番号を含む写し',
  copyWithBoth: '位置と製造番号を含む写し',
  position: '位置を含める',
  serial: 'カメラの製造番号を含める',
  original: '元のファイル（そのまま）',
  caution:
    '元のファイルにはカメラが書き込んだものがすべて残り、撮影場所や製造番号が分かることがあります。知られてもよい相手にだけ渡してください。',
} as const;
