;; Drillwright in Emacs: put these lines into init.el. Emacs 29 has eglot; for Emacs 28 it is a package (Debian: elpa-eglot),
;; and so is yaml-mode (Debian: elpa-yaml-mode).
(require 'eglot)
(add-to-list 'eglot-server-programs '(yaml-mode . ("drillwright" "language-server")))
;; A school is a project, with one server for all its folders.
(add-hook 'project-find-functions
          (lambda (folder)
            (let ((school (locate-dominating-file folder "school.yaml")))
              (and school (cons 'transient school)))))
(add-hook 'yaml-mode-hook #'eglot-ensure)
