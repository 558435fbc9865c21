# Files and folders that cannot be read or written.

file_refused =
    .found = { $why }
    .done = Nothing of this file is used.
    .fix = { $fix ->
        [password] Save it without a password.
        [smaller] Copy the table itself into a new workbook and save that in the season folder.
        [close] Close it in the other program (or ask for the right to read it), then run again.
        [copy] Copy it afresh into the season folder.
       *[anew] Open it in your spreadsheet program, save it anew as .xlsx or .csv, and run again.
    }
book_not_ordinary = it is not an ordinary file
book_in_use = the file can't be opened: it is locked by another program, or you may not read it
book_unreadable = the file can't be read ({ $why ->
        [none] the disk refused
       *[told] { $why }
    })
book_too_large = the file has { $mb } MB, more than the { $most } MB that hatchkit opens
book_unpacks_too_large = the file unpacks to { $mb } MB, more than the { $most } MB that hatchkit opens
book_text_too_large = the file has { $mb } MB, more than the { $most } MB of a table of batches
book_empty = the file is empty
book_password = the workbook is protected by a password
book_password_or_old = the workbook is protected by a password, or is an old workbook under a new name
book_damaged = the file is damaged or is not a workbook
book_sheet_damaged = sheet { $sheet } is damaged
book_spans = sheet { $sheet } spans { $rows } rows and { $columns } columns
book_not_text = the file is not text, though its name says so
book_not_table = the file is not a table of text
book_too_many = the file has more than { $rows } rows or { $columns } columns
book_not_whole = the file is damaged: it can't be unpacked whole
book_sheet_missing = the file is damaged: one of its sheets can't be found in it
book_sheets_unread = the file is damaged: the list of its sheets can't be read
book_table_unread = the file is damaged: its table can't be read
book_repeats = a cell is repeated so often that a sheet would have { $cells } cells
book_entities = the file defines text of its own that could unfold without end
book_sheet_hidden =
    .found = the sheet is hidden
    .done = It is read like the others.
    .fix = Delete it if it is not meant.
book_cell_error =
    .found = the cell shows { $shown }
    .done = The cell counts as empty.
    .fix = Fix its formula.
book_cells_unsaved =
    .found = { $count ->
        [one] 1 formula
       *[other] { $count } formulas
    } without a saved result, the first in { $cell }
    .done = These cells count as empty.
    .fix = Open the workbook in your spreadsheet program and save it once; then run again.
book_cell_far =
    .found = a cell far from the table: { $cell }
    .done = Only the first { $rows } rows and { $columns } columns are read.
    .fix = Delete the rows and columns beyond the table, then save.

no_folder = There is no folder { $folder }; check the spelling, or write the whole path.
folder_is_file = { $folder } is a file; hatchkit wants the folder that it lies in.
folder_unreadable = The folder { $folder } can't be read ({ $why }); ask for the right to read it, or copy it to where you may.
folder_only_lost = { $file }{ $sheet ->
        [none] { "" }
       *[named] , sheet { $sheet }
    }: { $found }. { $fix }
folder_empty = The folder { $folder } is empty; put your batches.xlsx or .csv in it, or write a blank one with: hatchkit start FOLDER.
folder_without_batches = There is no table of batches and no log in { $folder }; it holds: { LIST($there, most: 8) }. Put your batches.xlsx or .csv in it, or write a blank one with: hatchkit start FOLDER.
demo_missing = The demo season is not installed with this copy of hatchkit.
notebooks_missing = The notebooks are not installed with this copy of hatchkit.

out_suffix = { $path } cannot be the name of this file: give it one that ends in { $suffix }.
out_no_folder = { $path } cannot be written: give the name of a file in a folder that exists.
out_unwritable = { $path } cannot be written: { $why }.
out_own_records = { $path } is part of the season's own records, which are never written to: name another file.
out_would_be_read = { $path } would be read as part of the season: name it { $own }, or write it to another folder.
out_among_read = { $path } lies among the files that are read, which are never written to: name a file in another folder.

answers_head =
    # What was confirmed when hatchkit asked how this season's sheets are to be read
    # (hatchkit check FOLDER --ask, or notebook 0). Written by hatchkit; delete the file, or one [[answer]],
    # to be asked anew. What season.toml says wins.
