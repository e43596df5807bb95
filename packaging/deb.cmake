# The .deb: `cpack -G DEB`, with the flags and the date that packaging/deb sets.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME stonepenny)
set(CPACK_PACKAGE_CONTACT "The Stonepenny authors <authors@stonepenny.invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "job costing and quoting for hot-fix stone shops")
set(CPACK_PACKAGE_DESCRIPTION [[
Prices an order of hot-fix stone decals or garments while the customer waits
and prints the quote sheet; every figure opens down to what it is made of.
Keeps materials, designs, customers and quotes in one job book on your own
computer; a quote that was given reopens to the cent, whatever prices do later.]])
set(CPACK_STRIP_FILES ON)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)

set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
# The libraries that the program links, with the versions it needs of them. SQLite's is higher than the symbols say, for the
# STRICT tables of a job book; and scripts that our own lettering does not have need a font.
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libsqlite3-0 (>= 3.37), fonts-dejavu-core")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "coinor-cbc, desktop-file-utils, qt6-gtk-platformtheme, qt6-translations-l10n, qt6-wayland")

include(CPack)
