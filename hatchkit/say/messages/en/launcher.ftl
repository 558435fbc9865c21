# What the command line says when its work is done, and why it is not.

wrote = wrote { $path }
list_written = The list is in { $path }
page_written = The page is in { $path }
sheet_written = The sheet is in { $path }
open_in_browser = Open it in a browser; print it from there.
tables_written = The tables are in { $path }
marks_written = The marks are in { $path }
pages_written = The pages are in { $path }
page_begun = Reading { $name } and writing the page ...
start_nothing = Everything is there already in { $folder }; nothing was changed.
lesson_written = { $count ->
        [one] { $count } case is
       *[other] { $count } cases are
    } in { $folder }
    The answer book is for the teacher alone: { $path }
    Its seed stands in it; whoever knows the seed can make the answer book.
seed_short = So short a seed can be guessed by trying; where marks count, leave --seed out.
no_folder_yet = There is no folder { $folder }. Make one with: hatchkit start { $given }
tests_need_source = The tests come with the source; run this in a source checkout.
no_page = There is no page '{ $page }'; there are { $there }. To turn a notebook into a page: jupyter nbconvert --execute --to html.
file_unusable = { $file ->
        [none] a file
       *[named] { $file }
    } cannot be used: { $why }.
not_whole_from = '{ $given }' is not a whole number from { $least } up
unforeseen = { $error ->
        [MemoryError] the machine has not enough memory for it
       *[other] something happened that it did not foresee ({ $error })
    }{ $at ->
        [none] { "" }
       *[known] , at { $at }
    }. Your records are as they were{ $details ->
        [none] { "" }
       *[written] ; the details, for whoever keeps hatchkit, are in { $details }
    }.

click_name = Review this season
click_comment = Writes { $page } with hatchkit and opens it
click_enter = Press Enter to close this window.
click_untried = Untried: double-click writes { $page } beside this file and opens it.
