;; Drillwright in Emacs: put these lines into init.el. Emacs 29 has eglot; for Emacs 28 it is a package (Debian: elpa-eglot),
;; and so is yaml-mode (Debian: elpa-yaml-mode).
(require 'eglot)
(add-to-list 'eglot-server-programs '(yaml-mode . ("drillwright" "language-server")))
(add-hook 'yaml-mode-hook #'eglot-ensure)
