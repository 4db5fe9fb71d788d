/**
 * What every file of a survey needs: its names, its lock, bytes that are safely on disk before anything is called kept, rows of
 * CSV with their lines, and what a disk may do to them, in words. Ways in: {@link covewalk.survey.file.disk.FolderLock},
 * {@link covewalk.survey.file.disk.DurableFile}, {@link covewalk.survey.file.disk.RowBytes}. Knows no file's contents.
 */
package covewalk.survey.file.disk;
